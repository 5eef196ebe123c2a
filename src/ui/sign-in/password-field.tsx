'use client'

import { useState } from 'react'
import { Field } from '#ui/page/field'

type PasswordFieldProps = {
  readonly name?: string
  readonly label: string
  readonly autoComplete: 'current-password' | 'new-password'
  readonly hint?: string
  readonly problem?: string | null
}

/** A password, which may be pasted, kept by the browser, and looked at while it is typed. */
export function PasswordField({ name = 'password', label, autoComplete, hint, problem }: PasswordFieldProps) {
  const [isShown, setShown] = useState(false)
  return (
    <div>
      <Field
        name={name}
        label={label}
        hint={hint}
        problem={problem}
        type={isShown ? 'text' : 'password'}
        autoComplete={autoComplete}
        autoCapitalize="none"
        spellCheck={false}
        required
        maxLength={1000}
      />
      {/* Without a script it would do nothing. */}
      <label className="tap mt-1 inline-flex items-center gap-2 text-sm noscript:hidden">
        <input type="checkbox" checked={isShown} onChange={(event) => setShown(event.target.checked)} />
        Show what I type
      </label>
    </div>
  )
}

export const newPasswordHint =
  '15 letters or more, of any kind. Four or five words that do not belong together are easy to keep in mind.'
