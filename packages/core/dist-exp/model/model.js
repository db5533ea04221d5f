export {};
//# sourceMappingURL=model.js.map