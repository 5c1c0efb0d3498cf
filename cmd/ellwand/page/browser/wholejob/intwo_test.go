package wholejob

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

// bagInTwo is a job that is laid part folded, part open.
const bagInTwo = `job: Bag
units: cm
garments:
  - name: bag
    pieces:
      - {name: back, width: 48, height: 56, cut: 2, pair: true}
      - {name: front, width: 33, height: 50, cut: 2, pair: true}
      - {name: side, width: 35, height: 45, cut: 2, pair: true}
      - {name: flap, width: 60, height: 20}
cloths:
  - {name: shell, width: 102, nap: one way}
`

// In a lay of two parts a piece is dragged on its own part, and the rest is laid round it.
func TestDragInALayOfTwoParts(t *testing.T) {
	v := browser.VisitWith(t, browser.Usual, map[string]string{"bag.yaml": bagInTwo})
	v.Show("#/job/bag.yaml/lay/shell/1020mm/part%20folded%2C%20part%20open", `document.querySelector('.cloth .piece')`)
	v.Laid()
	v.Drag(browser.Piece("flap"), 60, -20)
	v.Until(browser.Held + `=== 1`)
	v.Laid()
	v.Saved()
	assert.Contains(t, v.File("bag.yaml"), `lay: "part folded, part open"`)
	assert.Contains(t, v.File("bag.yaml"), "on_open: yes")
	v.Drag(browser.Piece("side"), 10, 10)
	v.Until(browser.Held + `=== 2`)
	v.Laid()
	assert.True(t, browser.Value[bool](v, `[...document.querySelectorAll('.buttons a')].every((one) => !one.hidden)`),
		"what verifies can be printed")
}
