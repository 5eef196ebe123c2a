import 'server-only'
import { revalidatePath } from 'next/cache'
import { redirect, unstable_rethrow } from 'next/navigation'
import type { ZodType } from 'zod'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { type FormReply, fewProblems, parseFields, readForm, type ShownLink, typedOf } from '#server/form'
import { logFault } from '#server/log'
import { logRefusal } from '#server/log-refusal'
import { getViewer } from '#server/viewer'

/** What an action's body returns when it accepts: a sentence to show, or a page to go to. */
export type Done = { readonly message: string; readonly link?: ShownLink } | { readonly href: string }

export type FormAction = (previous: FormReply, form: FormData) => Promise<FormReply>

/**
 * A door for a form: who asks, what was sent, then the body, which authorises, decides in the core and saves with its
 * audit row in one transaction. Refusals come back with what was typed; faults are logged and answered in one sentence.
 */
export function action<Input>(
  schema: ZodType<Input>,
  body: (viewer: Viewer, input: Input) => Promise<Result<Done, Problem>>,
): FormAction {
  return async (_previous, form) => {
    const reply = await takeForm({ who: getViewer, schema, body }, form)
    if (reply.ok) revalidatePath('/', 'layout')
    return replyTo(reply, form)
  }
}

/** What a form comes to: who sends it, what was sent, then the body; a fault is logged and answered in one sentence. */
export async function takeForm<Who, Input>(
  door: {
    readonly who: () => Promise<Who>
    readonly schema: ZodType<Input>
    readonly body: (who: Who, input: Input) => Promise<Result<Done, Problem>>
  },
  form: FormData,
): Promise<Result<Done, Problem>> {
  try {
    const who = await door.who()
    const fields = readForm(form)
    if (!fields.ok) return fields
    const input = parseFields(door.schema, fields.value)
    return input.ok ? await door.body(who, input.value) : input
  } catch (error) {
    // Redirects and not-found travel as throws; they are Next's, not faults.
    unstable_rethrow(error)
    return refuse({ path: '', message: sentenceOf(error) })
  }
}

/** What the form shows of it; what it leads to is gone to by a throw of Next's. */
export function replyTo(result: Result<Done, Problem>, form: FormData): FormReply {
  if (!result.ok) return { status: 'refused', problems: fewProblems(result.reasons), typed: typedOf(form) }
  if ('href' in result.value) redirect(result.value.href)
  return { status: 'done', ...result.value }
}

/** What is said of what a body threw; a fault is logged. */
export function sentenceOf(error: unknown): string {
  if (error instanceof AppError && error.code !== 'notSignedIn') {
    logRefusal(error)
    return sentences[error.code]
  }
  logFault('action failed', error)
  return 'Something went wrong here and nothing was saved. What you typed is still on this page: try again.'
}

const sentences = {
  notAllowed: 'This is not yours to change. Ask the head coach of the club.',
  notFound: 'This is no longer there. Reload the page.',
  noSeason: 'The club has no season yet. Make one first, under Club.',
  conflict:
    'Somebody else wrote this at the same time, and nothing of yours was saved. Look at what stands there now, then save again.',
}

/** For bodies: the accepted ends of an action. */
export function saved(message: string): Result<Done, never> {
  return accept({ message })
}

/** With a link that is shown this once. */
export function savedWithLink(message: string, link: ShownLink): Result<Done, never> {
  return accept({ message, link })
}

export function goTo(href: string): Result<Done, never> {
  return accept({ href })
}
