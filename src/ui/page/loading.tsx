const widths = ['w-2/3', 'w-1/2', 'w-3/4', 'w-2/5', 'w-3/5', 'w-1/2']

/** Empty ruled rows while a page is on its way. */
export function Loading({ rows = 6 }: { readonly rows?: number }) {
  return (
    <div data-loading className="mx-auto max-w-7xl px-4 py-8 sm:px-6" role="status">
      <span className="sr-only">Loading</span>
      <div className="h-7 w-48 bg-band motion-safe:animate-pulse" />
      <div className="mt-6">
        {Array.from({ length: rows }, (_, row) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the rows are all alike
          <div key={row} className="border-b border-rule py-4">
            <div className={`h-4 bg-band motion-safe:animate-pulse ${widths[row % widths.length]}`} />
          </div>
        ))}
      </div>
    </div>
  )
}
