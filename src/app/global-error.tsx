'use client'

import './globals.css'
import { SomethingBroke } from '#ui/page/something-broke'

type GlobalErrorProps = { readonly error: Error & { readonly digest?: string }; readonly reset: () => void }

/** Stands in for the layout itself when that is what broke. */
export default function GlobalError({ error, reset }: GlobalErrorProps) {
  return (
    <html lang="en-GB">
      <body>
        <SomethingBroke digest={error.digest} retry={reset} />
      </body>
    </html>
  )
}
