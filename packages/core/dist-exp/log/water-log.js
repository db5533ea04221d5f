export {};
//# sourceMappingURL=water-log.js.map