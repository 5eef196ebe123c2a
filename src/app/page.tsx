import { redirect } from 'next/navigation'
import { LeaveForm } from '#app/leave-form'
import { SignedOut } from '#app/signed-out'
import { loadFirstPage } from '#server/first-page-views'
import { isSetUpOpen } from '#server/set-up'
import { chooseOwnPerson, signInToDemo } from '#server/sign-in-actions'
import { findSignedIn, listOwnPeople } from '#server/viewer'
import { FirstPageBody } from '#ui/first-page/first-page-body'
import { WholePage } from '#ui/page/whole-page'
import { paths } from '#ui/paths'

export default async function FirstPage() {
  if (await isSetUpOpen()) redirect(paths.setUp())
  const page = await loadFirstPage(await findSignedIn(), await listOwnPeople())
  return (
    <WholePage title="Turnbook">
      {page.signedIn ? null : <SignedOut />}
      <FirstPageBody {...page} signIn={signInToDemo} choose={chooseOwnPerson} signOut={<LeaveForm />} />
    </WholePage>
  )
}
