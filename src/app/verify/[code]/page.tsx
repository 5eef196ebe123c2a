import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { partsOfMailed } from '#server/sign-in/mailed-links'
import { setNewPassword, signInWithLink, verifyOwnAddress } from '#server/sign-in-actions'
import { WholePage } from '#ui/page/whole-page'
import { MailedLinkBody } from '#ui/sign-in/mailed-link-body'

// The secret in the address is told to no page that is gone to from here. With no-referrer a form sent without a script
// would say that it comes from nowhere, and be turned away.
export const metadata: Metadata = { title: 'A link from a mail', referrer: 'strict-origin' }

const titles = { signIn: 'Sign in', newPassword: 'A new password', address: 'Is this your address?' } as const
const sends = { signIn: signInWithLink, newPassword: setNewPassword, address: verifyOwnAddress } as const

type MailedLinkPageProps = { readonly params: Promise<{ readonly code: string }> }

export default async function MailedLinkPage({ params }: MailedLinkPageProps) {
  const mailed = partsOfMailed((await params).code)
  if (!mailed) notFound()
  const { purpose, secret } = mailed
  return (
    <WholePage title={titles[purpose]}>
      <MailedLinkBody purpose={purpose} code={secret} send={sends[purpose]} />
    </WholePage>
  )
}
