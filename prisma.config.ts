import { defineConfig } from 'prisma/config'

export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations' },
  // Only commands that talk to a database need it; generating the client does not.
  datasource: { url: process.env.DATABASE_URL ?? '' },
})
