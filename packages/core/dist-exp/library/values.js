export {};
//# sourceMappingURL=values.js.map