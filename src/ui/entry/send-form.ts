import type { Problem } from '#common/problem'

/** What a form's action answers. */
export type SendReply =
  | { readonly status: 'idle' }
  | { readonly status: 'done'; readonly message: string }
  | {
      readonly status: 'refused'
      readonly problems: readonly Problem[]
      readonly typed: Readonly<Record<string, string>>
    }

/** A form's action, handed in by the page. */
export type SendForm = (previous: SendReply, form: FormData) => Promise<SendReply>
