package wholejob

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// In a lay of two parts a piece is dragged on its own part, and the rest is laid round it.
func TestDragInALayOfTwoParts(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": browser.Job(t, "bagintwo.yaml")})
	v.Show("#/job/bag.yaml/lay/shell/1020mm/part%20folded%2C%20part%20open", `document.querySelector('.cloth .piece')`)
	v.Laid()
	v.Drag(browser.Piece("flap"), 60, -20)
	v.Until(browser.Held + `=== 1`)
	v.Laid()
	v.Saved()
	assert.Contains(t, v.File("bag.yaml"), "lay: part folded, part open")
	assert.Contains(t, v.File("bag.yaml"), "on_open: yes")
	v.Drag(browser.Piece("side"), 10, 10)
	v.Until(browser.Held + `=== 2`)
	v.Laid()
	assert.True(t, browser.Value[bool](v, `[...document.querySelectorAll('.buttons a')].every((one) => !one.hidden)`),
		"what verifies can be printed")
}

// A piece is dragged onto the other part: its copy comes along, what is said in words while
// it is in the hand, and the rest is laid round it there.
func TestDragOntoTheOtherPart(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": browser.Job(t, "baginone.yaml")})
	v.Show("#/job/bag.yaml/lay/shell/1400mm/one%20selvedge%20folded%20in", `document.querySelector('.cloth .piece')`)
	v.Laid()
	const sides = `[...document.querySelectorAll('.cloth .piece[aria-label^="side"]')].length `
	assert.Equal(t, 1, browser.Value[int](v, sides), "it lies double")
	cloth := browser.Value[[]float64](v, `(() => {
		const [cloth, side] = [document.querySelector('.cloth .stuff'), `+browser.Piece("side")+`].map(
			(one) => one.getBoundingClientRect());
		return [cloth.right - side.left, cloth.top + 3 - side.top];
	})()`)
	v.Drag(browser.Piece("side"), cloth[0], cloth[1])
	v.Until(browser.Held + `=== 1`)
	v.Laid()
	v.Saved()
	assert.Contains(t, v.File("bag.yaml"), "on_open: yes")
	v.Until(sides + `=== 2`)
	assert.True(t, browser.Value[bool](v, `[...document.querySelectorAll('.buttons a')].every((one) => !one.hidden)`),
		"what verifies can be printed")
	v.Click("undo")
	v.Until(browser.Held + `=== 0`)
	v.Laid()
	v.Saved()
	assert.NotContains(t, v.File("bag.yaml"), "laid_by_hand")
}
