import type { Role } from '#exposure/column'
import { roleFill } from '#ui/figures/role-patterns'
import { roleWord, words } from '#ui/words'

type RoleMarkProps = {
  readonly role: Role
  readonly kind: 'practice' | 'match'
  /** Without the word beside it the mark is read out by itself. */
  readonly hasWord?: boolean
}

/** A role by letter, pattern and colour, with its word. */
export function RoleMark({ role, kind, hasWord = true }: RoleMarkProps) {
  const word = roleWord(role, kind)
  return (
    <span className="inline-flex items-center gap-1.5 whitespace-nowrap">
      <svg
        viewBox="0 0 24 24"
        className="size-6 shrink-0"
        role="img"
        aria-hidden={hasWord || undefined}
        aria-label={hasWord ? undefined : word}
      >
        <rect
          x="0.75"
          y="0.75"
          width="22.5"
          height="22.5"
          fill={roleFill(role)}
          stroke={`var(--color-${role})`}
        />
        <rect x="5" y="4" width="14" height="16" fill="#ffffff" />
        <text x="12" y="17" textAnchor="middle" fontSize="14" fontWeight="700" fill="#1c1d22">
          {kind === 'match' && role === 'rest' ? 'O' : words.roleLetter[role]}
        </text>
      </svg>
      {hasWord ? word : null}
    </span>
  )
}
