// Package amounts tests, in a real browser, the amounts that the page writes and reckons.
package amounts

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/cmd/ellwand/page/browser"
)

func TestMain(m *testing.M) { browser.Main(m) }

// Amounts as the page writes them. An inch is 25.4 mm and a yard 914.4 mm: agreement of
// 1959.
func TestAmountsInWords(t *testing.T) {
	v := browser.Visit(t, browser.Usual)
	for _, one := range []struct{ call, want string }{
		{`buyText({ buy_yd: 1.875, buy_m: 1.7145 }, 'in')`, "1 7/8 yd"},
		{`buyText({ buy_yd: 2, buy_m: 1.83 }, 'yd')`, "2 yd"},
		{`buyText({ buy_yd: 2, buy_m: 1.8 }, 'cm')`, "1.80 m"},
		{`boughtText(2400.3, 'in')`, "2 5/8 yd"},
		{`boughtText(1850, 'cm')`, "1.85 m"},
		{`metres(914.4, 'in')`, "36 in"},
		{`metres(1234, 'cm')`, "1.23 m"},
		{`length(31.75, 'in')`, "1 1/4 in"},
		{`length(31.75, 'cm')`, "3.2 cm"},
		{`atLeast(1239.9, 'cm')`, "1.23 m"},
		{`atLeast(30, 'in')`, "1 1/8 in"},
		{`millimetres('16 3/8', 'in').toFixed(3)`, "415.925"},
		{`millimetres('2 yd', 'cm').toFixed(1)`, "1828.8"},
	} {
		got := browser.Await[string](v, `import('/site/modules/words.js').then((words) => words.`+one.call+`)`)
		assert.Equal(t, one.want, got, one.call)
	}
}
