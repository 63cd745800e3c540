import { defineConfig } from 'prisma/config'

// Only the workshop commands (generate, migrate dev) read this; the running app applies migrations itself.
export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations' },
  datasource: { url: process.env.DATABASE_URL ?? 'file:./data/daybook.db' },
})
