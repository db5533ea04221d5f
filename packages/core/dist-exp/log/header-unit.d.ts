/**
 * The unit that a header of a log writes: in brackets (`Ammonia (kg)`, `NO3 [mg/L as NO3]`) or among
 * its words (`Chloride g/L`); undefined where none is written. It need not be one that is known.
 */
export declare function unitInHeader(header: string): string | undefined;
//# sourceMappingURL=header-unit.d.ts.map