// The policy of the page lets no text be run as code; zod, which tries it, is told so before it is loaded, or a browser writes
// a refusal into its console for the page and each of its workers.
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
