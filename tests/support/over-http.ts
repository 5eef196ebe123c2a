/** A browser's share of the protocol, for tests that speak to a served book: its cookies, and the first page's buttons. */
export class HttpUser {
  readonly #address: string
  readonly #cookies = new Map<string, string>()

  constructor(address: string) {
    this.#address = address
  }

  async ask(path: string, how: RequestInit = {}): Promise<Response> {
    const cookie = [...this.#cookies].map(([name, value]) => `${name}=${value}`).join('; ')
    const headers = { ...how.headers, cookie, origin: this.#address }
    const response = await fetch(`${this.#address}${path}`, { redirect: 'manual', ...how, headers })
    for (const line of response.headers.getSetCookie()) {
      const [, name = '', value = ''] = /^([^=]+)=([^;]*)/.exec(line) ?? []
      this.#cookies.set(name, value)
    }
    return response
  }

  /** Presses the button of the first page that names somebody of the demo; where it leads. */
  async signIn(name: string): Promise<string> {
    const page = await (await this.ask('/')).text()
    const form = page.split('<form').find((one) => one.split('</form>')[0]?.includes(name))
    if (!form) throw new Error(`The first page has no button for ${name}.`)
    const body = new FormData()
    for (const [, field = '', value = ''] of form.matchAll(/name="([^"]+)"(?: value="([^"]*)")?/g))
      body.set(field, value)
    const response = await this.ask('/', { method: 'POST', body })
    await response.text()
    const home = response.headers.get('location')
    if (response.status !== 303 || !home)
      throw new Error(`Signing in as ${name} answered ${response.status}.`)
    return home
  }
}
