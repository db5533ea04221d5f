#!/usr/bin/env node
import { bundled } from './bundled.js';

const bundle = bundled();
const { start } = bundle ?? (await import('./start.js'));
await start();
bundle?.keepCode();
