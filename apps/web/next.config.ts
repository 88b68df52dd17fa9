import path from 'node:path';
import type { NextConfig } from 'next';

// A test build lives in its own folder and has the clock switch compiled in; a plain build has it
// compiled out, so no environment can turn it on.
const testBuild = process.env.TEST_BUILD === '1';

const config: NextConfig = {
  distDir: testBuild ? '.next-test' : '.next',
  env: { TEST_BUILD: testBuild ? '1' : '' },
  transpilePackages: [
    '@quartermark/api',
    '@quartermark/db',
    '@quartermark/digest',
    '@quartermark/engine',
    '@quartermark/jobs',
    '@quartermark/seed',
  ],
  serverExternalPackages: ['bullmq', 'pg', 'ioredis', 'postgres', 'pino'],
  outputFileTracingRoot: path.join(import.meta.dirname, '../..'),
  typedRoutes: true,
  poweredByHeader: false,
  devIndicators: false,
  // The proxy hands the body on; what is longer than the api's own cap need not be kept whole.
  experimental: { proxyClientMaxBodySize: '2mb' },
};

export default config;
