package kept

import (
	"testing"

	"ellwand/cmd/ellwand/page/browser"
)

// Eight tabs of one window, each opened after the other, all answer, though a browser has six
// connections to a program; and what is done in the last is seen in the first when one comes
// back to it.
func TestManyTabs(t *testing.T) {
	first := browser.Visit(t, browser.Usual, "skirt.yaml")
	there := browser.Value[string](first, `location.origin`) + "/#/job/skirt.yaml/measure"
	first.Show("#/job/skirt.yaml/measure", browser.OnScreen+`'measure'`)
	last := first
	for range 7 {
		last = first.Another(there)
		last.Until(browser.Labelled("For whom"))
	}
	last.Write("For whom", "Somebody Else")
	last.Saved()
	first.See()
	first.Until(browser.Labelled("For whom") + `.value === 'Somebody Else'`)
	first.Write("For whom", "Herself")
	first.Saved()
	last.See()
	last.Until(browser.Labelled("For whom") + `.value === 'Herself'`)
}
