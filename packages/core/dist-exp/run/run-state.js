export {};
//# sourceMappingURL=run-state.js.map