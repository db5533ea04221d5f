export {};
//# sourceMappingURL=log-map.js.map