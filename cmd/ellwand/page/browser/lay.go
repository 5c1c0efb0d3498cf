package browser

import "github.com/chromedp/chromedp"

// Usual look of a screen.
var Usual = Look{Wide: 1440, High: 900}

// OnScreen is how an expression begins that says which screen is shown; its name follows.
const OnScreen = `document.querySelector('main').dataset.screen === `

// Laid waits until the lay in view is found whole.
func (v *Visitor) Laid() {
	v.Helper()
	v.Until(`document.querySelector('.cloth .piece') && document.querySelector('.said .amount').textContent &&
		document.querySelector('.stop').hidden`)
}

// Held is how many pieces are held where they lie.
const Held = `document.querySelectorAll('.cloth .piece.held').length `

// Piece on the cloth, by its name.
func Piece(name string) string {
	return `document.querySelector('.cloth .piece[aria-label^="` + name + `"] .outline')`
}

// ClickOn what an expression gives.
func ClickOn(element string) chromedp.Action[chromedp.Void] {
	return chromedp.Evaluate[chromedp.Void](element + `.click()`)
}

// FirstOfPrint is how the first file that can be printed begins; a promise.
const FirstOfPrint = `fetch(document.querySelector('.prints a').href).then((answer) => answer.text())
	.then((text) => text.slice(0, 5))`
