package page

import (
	"crypto/rand"
	"crypto/subtle"
	"net/http"
	"net/url"
	"strings"
	"sync"
)

// door lets in the page that was opened from this machine, and nobody else.
//
// Whoever knows a key, which is good for once, is given a cookie; every other request
// needs that. A foreign page that is open in the same browser is told by its Origin and
// by what the browser says of the site that asks; a name that somebody has pointed at
// this machine, by its Host. What changes something needs a token of the page as well.
type door struct {
	host   string // 127.0.0.1:PORT
	cookie string
	// session is the value of the cookie, token what the page sends with a change, secret
	// what the sign of the page has, for which there is a new key.
	session, token, secret string

	mutex sync.Mutex
	keys  map[string]bool
}

func newDoor(host string) *door {
	_, port, _ := strings.Cut(host, ":")
	return &door{
		host: host, cookie: "ellwand-" + port, session: rand.Text(), token: rand.Text(), secret: rand.Text(),
		keys: map[string]bool{},
	}
}

// address that opens the page, once.
func (d *door) address() string {
	key := rand.Text()
	d.mutex.Lock()
	defer d.mutex.Unlock()
	d.keys[key] = true
	return "http://" + d.host + "/?key=" + url.QueryEscape(key)
}

// used takes a key, which is gone then.
func (d *door) used(key string) bool {
	d.mutex.Lock()
	defer d.mutex.Unlock()
	known := d.keys[key]
	delete(d.keys, key)
	return known
}

// tokenHeader has the token of the page in each request that changes something.
const tokenHeader = "X-Ellwand-Token"

// mostOfBody is read of a request, in bytes: a file of 16 MB as a page sends it
// [source.OwnChoice].
const mostOfBody = 24 << 20

// secretHeader has the secret of the sign of a page.
const secretHeader = "X-Ellwand-Secret"

// keyPath is where a second start of the program asks for a new key.
const keyPath = "/api/key"

// guard what stands behind the door.
func (d *door) guard(inside http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		secured(w.Header())
		switch {
		case !d.isOurHost(r.Host):
			refuse(w, r, "This page answers only to its own address, and was called by another name.")
		case !d.isOurOrigin(r):
			refuse(w, r, "Another page asked for this one. Ellwand answers only to its own page.")
		case r.Method == http.MethodGet && r.URL.Path == "/" && r.URL.Query().Has("key"):
			d.welcome(w, r)
		case r.Method == http.MethodPost && r.URL.Path == keyPath && same(r.Header.Get(secretHeader), d.secret):
			answer(w, http.StatusOK, map[string]string{"address": d.address()})
		case !d.isKnown(r):
			refuse(w, r, "This page was not opened by Ellwand. Start Ellwand again: it opens the page with the key to it.")
		case r.Method != http.MethodGet && r.Method != http.MethodHead && r.Method != http.MethodPost:
			answerError(w, r, http.StatusMethodNotAllowed, "This cannot be asked in this way.")
		case r.Method == http.MethodPost && !same(r.Header.Get(tokenHeader), d.token):
			refuse(w, r, "The page that asks is not the one that was opened. Load it again.")
		default:
			r.Body = http.MaxBytesReader(w, r.Body, mostOfBody)
			inside.ServeHTTP(w, r)
		}
	})
}

// welcome exchanges a key for the cookie, and leads to the address without it.
func (d *door) welcome(w http.ResponseWriter, r *http.Request) {
	if !d.used(r.URL.Query().Get("key")) && !d.isKnown(r) {
		refuse(w, r, "This address has been used already. Start Ellwand again: it opens the page with a new one.")
		return
	}
	http.SetCookie(w, &http.Cookie{
		Name: d.cookie, Value: d.session, Path: "/", HttpOnly: true, SameSite: http.SameSiteStrictMode,
	})
	http.Redirect(w, r, "/", http.StatusSeeOther)
}

func (d *door) isOurHost(host string) bool {
	_, port, _ := strings.Cut(d.host, ":")
	return host == d.host || host == "localhost:"+port
}

// isOurOrigin says that our own page asks, or whoever types the address.
func (d *door) isOurOrigin(r *http.Request) bool {
	if origin := r.Header.Get("Origin"); origin != "" && origin != "http://"+r.Host {
		return false
	}
	switch r.Header.Get("Sec-Fetch-Site") {
	case "", "same-origin", "none":
		return true
	}
	// A link to the page itself may be followed from anywhere; it shows nothing to whom it
	// comes from.
	return r.Method == http.MethodGet && r.URL.Path == "/" && r.Header.Get("Sec-Fetch-Mode") == "navigate"
}

func (d *door) isKnown(r *http.Request) bool {
	cookie, err := r.Cookie(d.cookie)
	return err == nil && same(cookie.Value, d.session)
}

func same(a, b string) bool { return subtle.ConstantTimeCompare([]byte(a), []byte(b)) == 1 }

// policy of what the page may load: its own files alone. Pictures may also be those that
// it holds itself, such as a photo of cloth that was just chosen.
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; " +
	"connect-src 'self'; font-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"

func secured(h http.Header) {
	h.Set("Content-Security-Policy", policy)
	h.Set("X-Content-Type-Options", "nosniff")
	h.Set("Referrer-Policy", "no-referrer")
	h.Set("Cross-Origin-Opener-Policy", "same-origin")
	h.Set("Cross-Origin-Resource-Policy", "same-origin")
	h.Set("Cache-Control", "no-store")
}
