/** What was not taken, and what was tapped and changes nothing. */
export function ToKnow({ sentences }: { readonly sentences: readonly string[] }) {
  if (sentences.length === 0) return null
  return (
    <div className="border-2 border-ink p-2">
      <h3 className="font-bold">To know</h3>
      <ul className="list-disc pl-5">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  )
}
