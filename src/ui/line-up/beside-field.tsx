import type { Problem } from '#common/problem'

/** What is wrong with the field above, and what would work. */
export function BesideField({ problems }: { readonly problems: readonly Problem[] }) {
  if (problems.length === 0) return null
  return (
    <div role="alert" className="max-w-prose border-l-4 border-warn bg-warn-pale px-4 py-2">
      {problems.map(({ path, message }) => (
        <p key={`${path} ${message}`} className="font-medium text-warn">
          {message}
        </p>
      ))}
    </div>
  )
}
