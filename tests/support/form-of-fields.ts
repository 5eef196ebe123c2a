/** A form as a page sends it, a field each; a field with several values is sent once for each. */
export function formOfFields(fields: Readonly<Record<string, string | readonly string[]>>): FormData {
  const form = new FormData()
  for (const [name, values] of Object.entries(fields))
    for (const value of [values].flat()) form.append(name, value)
  return form
}
