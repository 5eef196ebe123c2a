/** Words for colours that a bib may have; any other is shown by its word and pattern alone. */
const colours: Readonly<Record<string, string>> = {
  red: '#c1272d',
  orange: '#e08a00',
  yellow: '#f2d600',
  green: '#1b8a3a',
  blue: '#1f5fbf',
  purple: '#6f3fa0',
  pink: '#e76fa8',
  white: '#ffffff',
  black: '#000000',
}

/** The bibs of a side: its word, its colour where that has one, and a band for the first side, two for the second. */
export function Bib({ name, side }: { readonly name: string; readonly side: 0 | 1 }) {
  const fill = colours[name.trim().toLowerCase()] ?? '#ffffff'
  return (
    <span className="inline-flex items-center gap-1.5 whitespace-nowrap">
      <svg viewBox="0 0 24 24" className="size-6 shrink-0" aria-hidden="true">
        <path d="M4 3h4q4 5 8 0h4v18H4z" fill={fill} stroke="#000000" strokeWidth="2" />
        <path d={side === 0 ? 'M4 15h16' : 'M4 12h16M4 17h16'} stroke="#ffffff" strokeWidth="4" />
        <path d={side === 0 ? 'M4 15h16' : 'M4 12h16M4 17h16'} stroke="#000000" strokeWidth="2" />
      </svg>
      {name}
    </span>
  )
}
