/** One dimension a piece, from the second on: `a m_1 m_2 ...`, pieces parted by commas. */
export declare const joeKuo: string;
//# sourceMappingURL=joe-kuo.generated.d.ts.map