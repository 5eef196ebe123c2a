import 'server-only'
import { randomUUID } from 'node:crypto'
import { mkdir, rename, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { createTransport } from 'nodemailer'

export type Mail = { readonly to: string; readonly subject: string; readonly text: string }

/**
 * Sends a mail by the server of TURNBOOK_SMTP, or, where there is none, lays it as a file into the folder `outbox` of the
 * data folder, for whoever looks after the installation. Never inside a transaction: a mail cannot be taken back.
 */
export async function sendMail({ to, subject, text }: Mail): Promise<void> {
  const message = { from: sender(), to, subject, text }
  const server = process.env.TURNBOOK_SMTP
  if (server) {
    await createTransport(server, { disableFileAccess: true, disableUrlAccess: true } as object).sendMail(
      message,
    )
    return
  }
  const { message: letter } = await createTransport({ streamTransport: true, buffer: true }).sendMail(message)
  const folder = outboxFolder()
  await mkdir(folder, { recursive: true, mode: 0o700 })
  const name = `${new Date().toISOString().replaceAll(':', '-')}-${randomUUID().slice(0, 8)}.eml`
  const draft = join(folder, `${name}.part`)
  await writeFile(draft, letter as Buffer, { mode: 0o600, flush: true })
  await rename(draft, join(folder, name))
}

/** Where mails lie that no server takes. */
export function outboxFolder(): string {
  const folder = process.env.TURNBOOK_DATA
  if (!folder) throw new Error('TURNBOOK_DATA must be set: mails are laid there')
  return join(folder, 'outbox')
}

function sender(): string {
  const { TURNBOOK_MAIL_FROM, TURNBOOK_URL } = process.env
  if (TURNBOOK_MAIL_FROM) return TURNBOOK_MAIL_FROM
  return `turnbook@${TURNBOOK_URL ? new URL(TURNBOOK_URL).hostname : 'localhost'}`
}
