package nomouse

import (
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/page/browser"
)

// tap what has a name, with a finger.
func tap(v *browser.Visitor, name string) {
	v.Helper()
	v.Until(browser.Named(name))
	x, y := v.Middle(browser.Named(name))
	v.Do(chromedp.TapXY(x, y))
}

// swipe from the middle of an element by so many pixels.
func swipe(v *browser.Visitor, element string, right, down float64) {
	v.Helper()
	x, y := v.Middle(element)
	touch := func(kind input.DispatchTouchEventType, points ...*input.TouchPoint) {
		_, err := chromedp.Call(v.Tab, input.DispatchTouchEvent, input.DispatchTouchEventParams{
			Type: kind, TouchPoints: append([]*input.TouchPoint{}, points...),
		})
		require.NoError(v, err)
	}
	const steps = 8
	touch(input.DispatchTouchEventTypeTouchStart, &input.TouchPoint{X: x, Y: y})
	for i := 1; i <= steps; i++ {
		share := float64(i) / steps
		touch(input.DispatchTouchEventTypeTouchMove, &input.TouchPoint{X: x + share*right, Y: y + share*down})
	}
	touch(input.DispatchTouchEventTypeTouchEnd)
}

const armhole = `document.querySelector('.draft .edge[aria-label^="armhole"] .seam')`

// The main parts by finger, 1024 pixels wide: an allowance, a piece moved, turned and
// laid anew.
func TestByTouch(t *testing.T) {
	v := browser.Visit(t, browser.Look{Wide: 1024, High: 768, Touch: true}, "blouse.yaml")
	v.Show("#/job/blouse.yaml/measure", browser.OnScreen+`'measure'`)
	tap(v, "Pieces")
	v.Until(`document.querySelector('.draft .edge')`)
	v.Middle(armhole)
	at := browser.Value[[]float64](v, `((line) => {
		const at = line.getPointAtLength(line.getTotalLength() / 2).matrixTransform(line.getScreenCTM());
		return [at.x, at.y];
	})(`+armhole+`)`)
	v.Do(chromedp.TapXY(at[0], at[1]))
	v.Until(`document.querySelector('.draft .edge.picked')`)
	tap(v, "Lay")
	v.Laid()
	swipe(v, browser.Piece("sleeve"), 30, 10)
	v.Until(browser.Held + `=== 1`)
	tap(v, "Lay the rest anew")
	v.Laid()
	v.Until(browser.Held + `=== 1`)
}
