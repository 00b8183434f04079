import { fetchRuntime } from './electronRuntime.ts';

const data = process.argv[2];
process.exit(data !== undefined && fetchRuntime(data) ? 0 : 1);
