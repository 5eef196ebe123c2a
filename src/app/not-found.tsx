import { WholePage } from '#ui/page/whole-page'
import { WholePageLinkButton } from '#ui/page/whole-page-link-button'
import { paths } from '#ui/paths'

export default function NotFoundPage() {
  return (
    <WholePage title="This is not in the book">
      <p>There is no such page, or it is not yours to open.</p>
      <p>
        <WholePageLinkButton href={paths.start()}>To the first page</WholePageLinkButton>
      </p>
    </WholePage>
  )
}
