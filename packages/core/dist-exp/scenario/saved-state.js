export {};
//# sourceMappingURL=saved-state.js.map