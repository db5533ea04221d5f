#!/usr/bin/env node
import { Command } from 'commander';

await new Command('leat')
  .description('Nitrogen in recirculating fish-and-plant systems')
  .version('0.1.0')
  .parseAsync();
