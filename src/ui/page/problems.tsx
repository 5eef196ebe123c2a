import type { ReactNode } from 'react'
import type { Problem } from '#common/problem'

type ProblemsProps = {
  readonly title: string
  readonly problems: readonly Problem[]
  /** Labels of the fields by their path; a path without one is shown as it is. */
  readonly places?: Readonly<Record<string, string>>
}

/** Says that nothing was saved and why, one line each: where, what is wrong, what would be right. The fields keep what was typed. */
export function Problems({ title, problems, places = {} }: ProblemsProps) {
  if (problems.length === 0) return null
  return (
    <div role="alert" className="border-l-4 border-warn bg-warn-pale px-4 py-3">
      <p className="font-semibold text-warn">{title}</p>
      <ul className="mt-1 space-y-1">
        {problems.map(({ path, message }) => (
          <li key={`${path} ${message}`}>
            {path ? <strong className="font-semibold">{places[path] ?? path}: </strong> : null}
            {message}
          </li>
        ))}
      </ul>
    </div>
  )
}

/** One thing that went wrong with the page as a whole, and the way on. */
export function ErrorNote({ title, children }: { readonly title: string; readonly children?: ReactNode }) {
  return (
    <div role="alert" className="border-l-4 border-warn bg-warn-pale px-4 py-3">
      <p className="font-semibold text-warn">{title}</p>
      {children ? <div className="mt-1">{children}</div> : null}
    </div>
  )
}
