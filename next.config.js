import { readFileSync } from 'node:fs'

const { version } = JSON.parse(readFileSync(new URL('./package.json', import.meta.url), 'utf8'))

const everywhere = [
  { key: 'x-content-type-options', value: 'nosniff' },
  // Never the path: the keys of cards and of own pages stand in it, and a front server writes it into its log.
  { key: 'referrer-policy', value: 'strict-origin' },
  { key: 'x-frame-options', value: 'DENY' },
  { key: 'cross-origin-opener-policy', value: 'same-origin' },
  { key: 'cross-origin-resource-policy', value: 'same-origin' },
  {
    key: 'permissions-policy',
    value:
      'accelerometer=(), camera=(), display-capture=(), geolocation=(), gyroscope=(), magnetometer=(), microphone=(), midi=(), payment=(), usb=()',
  },
]
// Pages get theirs from proxy.ts, with a number for each answer.
const forMachines = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'"
// A worker is bound by the policy its own script came with: it fetches from this server and nowhere else.
const forWorker = "default-src 'none'; connect-src 'self'; frame-ancestors 'none'"

/** @type {import('next').NextConfig} */
const config = {
  // Several servers may run from one folder (tests beside a desk): each with its own build folder.
  distDir: process.env.DAYBOOK_BUILD ?? '.next',
  // `npm test` and CI check the types; a newcomer's first start need not wait for them.
  typescript: { ignoreBuildErrors: true },
  // Written into the pages when they are built: a phone tells the desk which build it runs.
  // The version stands in package.json and nowhere else.
  env: { DAYBOOK_APP_BUILD: new Date().toISOString().slice(0, 16), DAYBOOK_VERSION: version },
  poweredByHeader: false,
  reactStrictMode: true,
  devIndicators: false,
  // A members' list of two megabytes, and what a form adds to it.
  experimental: { serverActions: { bodySizeLimit: '3mb' } },
  serverExternalPackages: [
    'better-sqlite3',
    '@prisma/client',
    '@prisma/adapter-better-sqlite3',
    'pino',
    'exceljs',
    'esbuild',
  ],
  outputFileTracingRoot: import.meta.dirname,
  headers: async () => [
    { source: '/:path*', headers: everywhere },
    {
      // A browser heeds this over https only; the front server says by which way the request came.
      source: '/:path*',
      has: [{ type: 'header', key: 'x-forwarded-proto', value: 'https' }],
      headers: [{ key: 'strict-transport-security', value: 'max-age=31536000; includeSubDomains' }],
    },
    {
      source: '/api/:path*',
      headers: [
        { key: 'content-security-policy', value: forMachines },
        { key: 'x-robots-tag', value: 'noindex, nofollow' },
      ],
    },
    { source: '/card-worker.js', headers: [{ key: 'content-security-policy', value: forWorker }] },
  ],
  // No picture of ours is made smaller on the way: the address that does so fetches and logs whatever it is asked for.
  images: { unoptimized: true },
  turbopack: { root: import.meta.dirname },
}

export default config
