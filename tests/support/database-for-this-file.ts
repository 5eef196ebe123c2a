import { afterAll } from 'vitest'
import { cloneTestDatabase } from './test-database'

const database = await cloneTestDatabase()
process.env.DATABASE_URL = database.ownerUrl
process.env.DATABASE_APP_URL = database.appUrl

afterAll(() => database.drop())
