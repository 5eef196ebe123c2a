import { loadFirstPage } from '#server/first-page-views'
import { leave, signInToDemo } from '#server/sign-in-actions'
import { findSignedIn } from '#server/viewer'
import { FirstPageBody } from '#ui/first-page/first-page-body'
import { WholePage } from '#ui/page/whole-page'

export default async function FirstPage() {
  const page = await loadFirstPage(await findSignedIn())
  return (
    <WholePage title="Turnbook">
      <FirstPageBody {...page} signIn={signInToDemo} signOut={leave} />
    </WholePage>
  )
}
