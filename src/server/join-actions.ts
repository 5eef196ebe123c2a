'use server'

import { cookies } from 'next/headers'
import { redirect } from 'next/navigation'
import { readForm } from '#server/form'
import { signedPass } from '#server/helper-secret'
import { loadJoin } from '#server/helper-views'
import { helperCookie } from '#server/pitch-asker'

/**
 * Lets whoever holds a good code tap at that practice, by a cookie that the browser sends nowhere but there. Anything
 * else leads back to the page of the code, which says what is wrong.
 */
export async function joinPractice(form: FormData): Promise<void> {
  const fields = readForm(form)
  const code = fields.ok && typeof fields.value.code === 'string' ? fields.value.code.slice(0, 400) : ''
  const page = await loadJoin(code)
  if (!page?.isOpen) redirect(code ? `/join/${encodeURIComponent(code)}` : '/')
  ;(await cookies()).set(helperCookie, signedPass(page), {
    httpOnly: true,
    sameSite: 'strict',
    secure: process.env.TURNBOOK_URL?.startsWith('https:') ?? false,
    path: `/api/pitch/${page.sessionId}`,
    expires: page.expiresAt,
  })
  redirect(`/pitch#${page.sessionId}`)
}
