import type { ReactNode } from 'react'

export type TableHead = { readonly key: string; readonly label: ReactNode; readonly isFigure?: boolean }

type TableProps = {
  /** What the table shows; read out, and seen unless `hideCaption`. */
  readonly caption: string
  readonly hideCaption?: boolean
  readonly head: readonly TableHead[]
  /** Rows: `<tr>` with a `<th scope="row">` first; figures carry the class `figure`. */
  readonly children: ReactNode
}

/** A ruled table. Wider than the screen it scrolls by itself, its first column staying in sight. */
export function Table({ caption, hideCaption = false, head, children }: TableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className="relative overflow-x-auto" tabIndex={0} aria-label={caption}>
      <table className="ruled">
        <caption className={hideCaption ? 'sr-only' : 'pb-2 text-left text-sm text-soft'}>{caption}</caption>
        <thead>
          <tr>
            {head.map(({ key, label, isFigure }) => (
              <th key={key} scope="col" className={isFigure ? 'figure' : undefined}>
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </section>
  )
}
