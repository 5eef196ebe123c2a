'use client'

import { fieldLook } from '#ui/page/field'

export type ThemeName = { readonly id: string; readonly name: string }

/** The theme of a round, or none. */
export function ThemeSelect({
  themes,
  themeId,
  onChange,
}: {
  readonly themes: readonly ThemeName[]
  readonly themeId: string | null
  readonly onChange: (themeId: string | null) => void
}) {
  return (
    <label className="text-sm font-medium text-soft">
      Theme
      <select
        className={`${fieldLook} mt-1`}
        value={themeId ?? ''}
        onChange={(event) => onChange(event.target.value || null)}
      >
        <option value="">No theme</option>
        {themes.map((theme) => (
          <option key={theme.id} value={theme.id}>
            {theme.name}
          </option>
        ))}
      </select>
    </label>
  )
}
