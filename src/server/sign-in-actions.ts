'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { listDemoPeople } from '#data/people'
import { isDemoMode } from '#server/demo-mode'
import { findViewer } from '#server/find-viewer'
import { readForm } from '#server/form'
import { homeOf } from '#server/home-of'
import { leaveSession, openSession } from '#server/sign-in'
import { demoLoginOf } from '#server/sign-in/demo-login'

const person = z.object({ clubId: z.uuid(), personId: z.uuid() })

/** Signs in as somebody of a demo club, and only in demo mode: anything else leads back to the first page. */
export async function signInToDemo(form: FormData): Promise<void> {
  const fields = readForm(form)
  const asked = person.safeParse(fields.ok ? fields.value : null)
  if (!isDemoMode() || !asked.success) redirect('/')
  const { clubId, personId } = asked.data
  const isOffered = (await listDemoPeople()).some((one) => one.clubId === clubId && one.id === personId)
  const viewer = isOffered ? await findViewer(asked.data) : null
  if (!viewer) redirect('/')
  await openSession({ loginId: await demoLoginOf(asked.data), as: asked.data })
  redirect(homeOf(viewer) ?? '/')
}

export async function leave(): Promise<void> {
  await leaveSession()
  redirect('/')
}
