export default function Page() {
  return <p>Turnbook</p>
}
