import type { Role } from '#exposure/column'

/** Fill of a role in any drawing of a page: colour and pattern. Needs `RolePatterns` once on the page, which `Page` puts there. */
export function roleFill(role: Role): string {
  return `url(#role-${role})`
}

/** Attack is solid, defence upright lines, goal dots, waiting thin level lines; as planned is a pale slanted hatch over any of them. */
export function RolePatterns() {
  return (
    <svg width="0" height="0" aria-hidden="true" className="absolute">
      <defs>
        <pattern id="role-attack" width="6" height="6" patternUnits="userSpaceOnUse">
          <rect width="6" height="6" fill="var(--color-attack)" />
        </pattern>
        <pattern id="role-defend" width="5" height="5" patternUnits="userSpaceOnUse">
          <rect width="5" height="5" fill="#cfe3f0" />
          <rect width="3" height="5" fill="var(--color-defend)" />
        </pattern>
        <pattern id="role-keep" width="6" height="6" patternUnits="userSpaceOnUse">
          <rect width="6" height="6" fill="#cdeae1" />
          <circle cx="3" cy="3" r="2.1" fill="var(--color-keep)" />
        </pattern>
        <pattern id="role-rest" width="5" height="5" patternUnits="userSpaceOnUse">
          <rect width="5" height="5" fill="#f4f4f4" />
          <rect width="5" height="1.4" fill="var(--color-rest)" />
        </pattern>
        <pattern
          id="hatch-over"
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="3" height="7" fill="#ffffff" fillOpacity="0.75" />
        </pattern>
        <pattern
          id="hatch-ink"
          width="4"
          height="4"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="4" height="4" fill="#ffffff" />
          <rect width="1.6" height="4" fill="var(--color-ink)" />
        </pattern>
      </defs>
    </svg>
  )
}
