export {};
//# sourceMappingURL=doser.js.map