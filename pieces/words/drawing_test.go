package words

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/pieces/linework"
)

func TestInDrawing(t *testing.T) {
	for want, f := range map[string]*linework.Fault{
		"page 3: its paper has no size; open the file in a viewer and print it to a new one": {
			Of: linework.PaperNoSize, Page: 3},
		"the PDF file has more than 500 pages; take out those of the pattern": {Of: linework.TooManyPages, Number: 500},
		`line 7: <path> d: a number is missing at "wide"`: {
			Of: linework.NumberMissing, Line: 7, Element: "path", Attribute: "d", Text: "wide"},
		`there is no layer "size 16"; it has Size 14, Size 12`: {
			Of: linework.NoSuchLayer, Text: "size 16", Names: []string{"Size 14", "Size 12"}},
		`there is no layer "seams"; it has none`:                      {Of: linework.NoSuchLayer, Text: "seams"},
		"there are no lines 4; the overview numbers them from 1 to 3": {Of: linework.NoSuchLines, Number: 4, Known: 3},
		"there is no page 9; the file has 4":                          {Of: linework.NoSuchPage, Number: 9, Known: 4},
	} {
		assert.EqualError(t, Refused(f), want)
		assert.EqualError(t, fmt.Errorf("skirt: %w", Refused(f)), "skirt: "+want)
	}
}
