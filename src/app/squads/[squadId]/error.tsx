'use client'

import { SomethingBroke } from '#ui/page/something-broke'

type ErrorPageProps = { readonly error: Error & { readonly digest?: string }; readonly reset: () => void }

export default function ErrorPage({ error, reset }: ErrorPageProps) {
  return <SomethingBroke digest={error.digest} retry={reset} />
}
