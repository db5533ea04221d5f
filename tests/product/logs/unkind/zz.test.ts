import { it } from 'vitest';
import { appendFileSync, writeFileSync } from 'node:fs';
import { judged, geometricMean } from './judge.js';
import { unkindTwin } from './twin.js';
const seeds = (process.env['SEEDS'] ?? '1').split(',').map(Number);
for (const seed of seeds) it(`seed ${seed}`, () => {
  const c = process.cpuUsage().user;
  const twin = unkindTwin(seed);
  const origins: unknown[] = [];
  (globalThis as any).DUMP = (x: unknown) => origins.push(x);
  const cells = judged(seed);
  writeFileSync(`/tmp/w/logs-out/dump-${seed}.json`, JSON.stringify({ seed, truth: twin.truth, origins }, (_, v) => v === Infinity ? 'Inf' : v === -Infinity ? '-Inf' : v));
  appendFileSync('/tmp/w/logs-out/cells.jsonl', JSON.stringify({ seed, truth: twin.truth, cells }) + '\n');
  console.log(seed, ((process.cpuUsage().user - c) / 1e6).toFixed(1), 's', geometricMean(cells.map((x) => x.ratio)).toFixed(3), JSON.stringify(cells.map((x) => [x.reads, x.horizon, x.count, x.ratio?.toFixed(2), x.model?.toFixed(2), x.in90.toFixed(2)])));
}, 1000000);
