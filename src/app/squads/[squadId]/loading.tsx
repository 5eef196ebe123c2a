import { Loading } from '#ui/page/loading'

export default function LoadingPage() {
  return <Loading />
}
