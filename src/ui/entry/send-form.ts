import type { Problem } from '#common/problem'

/** A link that is shown this once, and its code as squares in a drawing `size` units wide. */
export type LinkToShow = {
  readonly href: string
  readonly code: { readonly size: number; readonly path: string }
}

/** What a form's action answers. */
export type SendReply =
  | { readonly status: 'idle' }
  | { readonly status: 'done'; readonly message: string; readonly link?: LinkToShow }
  | {
      readonly status: 'refused'
      readonly problems: readonly Problem[]
      readonly typed: Readonly<Record<string, string>>
    }

/** A form's action, handed in by the page. */
export type SendForm = (previous: SendReply, form: FormData) => Promise<SendReply>
