/** Hash of plain values, 64 hexadecimal digits: the same for the same values whatever the order of keys. */
export declare function contentHash(value: unknown): string;
//# sourceMappingURL=content-hash.d.ts.map