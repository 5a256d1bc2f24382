import type { ViteUserConfig } from 'vitest/config';

const config: ViteUserConfig = {
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
};

export default config;
