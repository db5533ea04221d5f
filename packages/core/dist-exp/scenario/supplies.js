export {};
//# sourceMappingURL=supplies.js.map