import { newId } from '#data/ids'
import { askAs } from './ask-as'
import { testDatabase } from './test-database'

/** A database of its own, made by a role that is no superuser, as on somebody else's server. */
export async function withPlainOwner(
  work: (urls: { readonly ownerUrl: string; readonly appUrl: string }) => Promise<void>,
): Promise<void> {
  const { ownerUrl, appUrl } = testDatabase()
  const name = `tb_plain_${newId().slice(-8)}`
  const at = (url: string, role?: string) => {
    const moved = new URL(url)
    moved.pathname = name
    if (role) moved.username = role
    if (role) moved.password = 'only-for-tests'
    return moved.href
  }
  await askAs(ownerUrl, async (client) => {
    await client.query(`create role ${name} login nosuperuser password 'only-for-tests'`)
    await client.query(`create database ${name} owner ${name}`)
  })
  try {
    await work({ ownerUrl: at(ownerUrl, name), appUrl: at(appUrl) })
  } finally {
    await askAs(ownerUrl, async (client) => {
      await client.query(`drop database ${name} with (force)`)
      await client.query(`drop role ${name}`)
    })
  }
}
