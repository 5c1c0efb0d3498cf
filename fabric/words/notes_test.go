package words

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

func TestNotes(t *testing.T) {
	plan := lay.Plan{
		Asked: []pieces.Piece{{Name: "front"}, {Name: "sleeve"}},
		Dropped: []lay.Match{
			{Name: marks.Called("waist"), Pieces: []int{1}}, {Pieces: []int{0}, Across: true},
			{Name: marks.Called("waist"), Pieces: []int{1}},
		},
	}
	inches := plan
	inches.Cloth = cloth.Cloth{Inches: true}
	for _, tt := range []struct {
		of   lay.Plan
		note lay.Note
		want string
	}{
		{plan, lay.Note{Text: "Asked for was another lay."}, "Asked for was another lay."},
		{plan, lay.Note{Of: lay.CutOnce, Pieces: []string{"pocket", "tie"}},
			"The folded cloth gives two of everything, and of pocket, tie only one is wanted in its place on the plan: " +
				"leave that place whole until the rest is cut, then open the cloth there and cut it from the lower layer, " +
				"which lies right side up."},
		{plan, lay.Note{Of: lay.LittleMore, Length: 12}, "The length to buy is only 1.2 cm more than the lay takes. " +
			"Straightening the cut ends takes 2 to 5 cm: buy a little more, unless the shop cuts along a thread."},
		{inches, lay.Note{Of: lay.LittleMore, Length: 0.4}, "The length to buy is no more than the lay takes. " +
			"Straightening the cut ends takes 3/4 to 2 in: buy a little more, unless the shop cuts along a thread."},
		{plan, lay.Note{Of: lay.LittleSpare, Length: 5},
			"Only 0.5 cm of the length are to spare, and straightening the cut ends takes 2 to 5 cm: check that both ends " +
				"are cut along a thread."},
		{plan, lay.Note{Of: lay.Unmatched},
			"Not everything can be matched at once: right and left of front cannot be matched across as well as the other " +
				"points; waist of sleeve cannot be matched along the warp as well as the others."},
		{plan, lay.Note{Of: lay.Unsure, Pieces: []string{"collar"}},
			"The job calls collar approximate, so that \"never below\" is " +
				"reckoned without it: the pieces themselves may lie in less."},
		{plan, lay.Note{Of: lay.OneHanded, Pieces: []string{"back", "cuff"}},
			"All the same way up, so that there is no left one: back, cuff. Say that it is a pair where a right one and a " +
				"left one are meant (pair: yes)."},
		{plan, lay.Note{Of: lay.AllowanceUnknown, Pieces: []string{"back"}}, "The seam allowances of back are not known: " +
			"the outlines are cut as they are drawn, and nothing is added."},
		{plan, lay.Note{Of: lay.InARow},
			"The plan shows the remnants in a row, a bar between them; lay each by itself, its cut end on your left, and " +
				"measure along from there."},
	} {
		tt.of.Notes = []lay.Note{tt.note}
		assert.Equal(t, []string{tt.want}, Notes(tt.of))
	}
	assert.Empty(t, Notes(lay.Plan{}))
}
