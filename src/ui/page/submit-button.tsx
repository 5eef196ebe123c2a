'use client'

import type { ComponentProps } from 'react'
import { useFormStatus } from 'react-dom'
import { Button } from '#ui/page/button'

/** Sends its form once: while the answer is on its way it says so and takes no second tap. */
export function SubmitButton({ children, disabled, ...rest }: ComponentProps<typeof Button>) {
  const { pending } = useFormStatus()
  return (
    <Button {...rest} type="submit" disabled={disabled || pending} aria-busy={pending}>
      {children}
      {pending ? (
        <span role="status" className="page-pending">
          <span className="sr-only">Saving</span>
        </span>
      ) : null}
    </Button>
  )
}
