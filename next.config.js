/** @type {import('next').NextConfig} */
const config = {
  // Several servers may run from one folder (tests beside a desk): each with its own build folder.
  distDir: process.env.DAYBOOK_BUILD ?? '.next',
  // `npm test` and CI check the types; a newcomer's first start need not wait for them.
  typescript: { ignoreBuildErrors: true },
  poweredByHeader: false,
  reactStrictMode: true,
  devIndicators: false,
  serverExternalPackages: [
    'better-sqlite3',
    '@prisma/client',
    '@prisma/adapter-better-sqlite3',
    'pino',
    'exceljs',
    'esbuild',
  ],
  outputFileTracingRoot: import.meta.dirname,
  turbopack: { root: import.meta.dirname },
}

export default config
