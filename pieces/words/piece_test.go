package words

import (
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"strconv"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/language/spoken"
	"ellwand/pieces/linework"
	"ellwand/pieces/marks"
	"ellwand/pieces/outline"
	"ellwand/pieces/seams"
)

func TestFaulty(t *testing.T) {
	side, dart := seams.SideSeam, seams.Waist.Dart(0)
	for want, f := range map[string]pieces.Fault{
		"give it a name":                                        {Of: pieces.NoName},
		"it has no edges; draw its seam line":                   {Of: pieces.NoEdges},
		`edge "side" has no usable line; give it a length`:      {Of: pieces.NoLine, Edge: side},
		"edge 2 has no name":                                    {Of: pieces.EdgeUnnamed, Number: 2},
		"the outline encloses no area":                          {Of: pieces.NoArea},
		"its grain is neither straight, cross nor bias":         {Of: pieces.UnknownGrain},
		"its accuracy is no length of 0 or more":                {Of: pieces.AccuracyNoLength},
		"the cut count is 0; it must be 1 or more":              {Of: pieces.CutNone},
		"the edges enclose nothing, so there is nothing to cut": {Of: pieces.NothingToCut},
		`edge "side" is broken: part 2 begins 2.125 mm away from where part 1 ends`: {
			Of: pieces.Broken, Edge: side, Number: 2, Length: 2.1251},
		`edge "side" begins 5 mm away from where edge "hem" ends; the edges must chain up to a closed outline`: {
			Of: pieces.NotChained, Edge: side, Other: seams.Hem, Length: 5},
		`two edges are named "waist 2"; every edge needs a name of its own`: {
			Of: pieces.EdgeNamedTwice, Edge: seams.Waist.Stretch(2)},
		`the outline crosses or touches itself near (50, -1.5) mm, between edge "side" and edge "hem"`: {
			Of: pieces.Crossed, At: orb.Point{50, -1.5}, Edge: side, Other: seams.Hem},
		"the outline runs clockwise; list the edges counter-clockwise, or mirror the piece": {Of: pieces.Clockwise},
		"it has no grainline; draw one with its upper end where the top of the piece is":    {Of: pieces.NoGrain},
		`the seam allowance on "side" is -2 cm; it cannot be negative`: {
			Of: pieces.AllowanceNegative, Edge: side, Length: -20},
		`the seam allowance on "side" is not a number`:                {Of: pieces.AllowanceNoNumber, Edge: side},
		`the allowance that "side" includes is no width of 0 or more`: {Of: pieces.IncludedNoWidth, Edge: side},
		`the fold edge "side" is not an edge of it`:                   {Of: pieces.FoldNoEdge, Edge: side},
		`the fold edge "side" is not straight`:                        {Of: pieces.FoldBent, Edge: side},
		`a notch is on the edge "side", which it does not have`:       {Of: pieces.NotchNoEdge, Edge: side},
		`the mark "pocket" has no usable place`:                       {Of: pieces.MarkNowhere, Mark: marks.Called("pocket")},
		`the dart "waist dart" has both its ends in one place`:        {Of: pieces.DartFlat, Dart: dart},
		`the apex of the dart "waist dart" must lie inside the piece`: {Of: pieces.DartApexOnEdge, Dart: dart},
		"the cut count is 3, but a pair needs an even one: one right and one left, or several": {
			Of: pieces.PairUneven, Number: 3},
		"away from the fold, the seam allowances cross the fold line; make them narrower there": {
			Of: pieces.AllowanceAcrossFold},
		`the allowance that the edge "side" includes leaves nothing of the piece beside it; check how wide it is`: {
			Of: pieces.NothingInside, Edge: side},
		`the fold edge "side" is not cut, so it has no seam allowance; set it to 0`: {
			Of: pieces.FoldAllowance, Edge: side},
		`it reaches 30 mm across its fold edge "side"; a half must lie on one side of its fold`: {
			Of: pieces.AcrossFold, Edge: side, Length: 30},
		`the notch at 221 mm lies off the edge "side", which is 220 mm long`: {
			Of: pieces.NotchOffEdge, Edge: side, Length: 221, Whole: 220},
		`the notch at 30 mm on the edge "side" has 0 strokes; it needs 1 or 2`: {
			Of: pieces.NotchNoStrokes, Edge: side, Length: 30},
		`the dart "waist dart" reaches outside the piece at (110, 600) mm`: {
			Of: pieces.DartOutside, Dart: dart, At: orb.Point{110, 600}},
		`the mouth of the dart "waist dart" is the edge "side", which it does not have`: {
			Of: pieces.DartNoMouth, Dart: dart, Edge: side},
		`the legs of the dart "waist dart" do not meet the ends of its mouth "side"`: {
			Of: pieces.DartLegsApart, Dart: dart, Edge: side},
	} {
		assert.Equal(t, want, Faulty(f).String())
	}
}

// Everything that can be wrong with pieces, their points, readings and drawings has its
// words, and there are none of another.
func TestEveryDefectHasItsWords(t *testing.T) {
	defects := constantsOf(t, "../fault.go")
	require.Greater(t, len(defects), 30)
	for _, defect := range defects {
		assert.Contains(t, faulty, pieces.Defect(defect))
		spoken.Both(t, defect, Faulty(pieces.Fault{Of: pieces.Defect(defect)}))
	}
	assert.Len(t, faulty, len(defects))
	defects = constantsOf(t, "../outline/fault.go")
	require.Greater(t, len(defects), 12)
	for _, defect := range defects {
		of := outline.Defect(defect)
		inNode := AtNode(&outline.Fault{Of: of})
		inReading := InReadings(&outline.ReadingFault{Of: of, Places: []float64{1}}, func(float64) string { return "5 cm" })
		assert.NotEqual(t, inNode.String() == defect, inReading.String() == defect, "%s", defect)
		for _, said := range []language.Sentence{inNode, inReading} {
			if said.String() != defect {
				spoken.Both(t, defect, said)
			}
		}
	}
	defects = constantsOf(t, "../linework/fault.go")
	require.Greater(t, len(defects), 30)
	for _, defect := range defects {
		assert.Contains(t, inDrawing, linework.Defect(defect))
	}
	assert.Len(t, inDrawing, len(defects))
}

// constantsOf the type Defect in a file.
func constantsOf(t *testing.T, path string) []string {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
	require.NoError(t, err)
	var out []string
	ast.Inspect(file, func(n ast.Node) bool {
		if spec, ok := n.(*ast.ValueSpec); ok && fmt.Sprint(spec.Type) == "Defect" {
			text, err := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
			require.NoError(t, err)
			assert.NotContains(t, out, text, "it stands twice")
			out = append(out, text)
		}
		return true
	})
	return out
}

func TestRefused(t *testing.T) {
	assert.NoError(t, Refused(nil))
	cuff, unnamed := pieces.Fault{Of: pieces.CutNone, Piece: "cuff"}, pieces.Fault{Of: pieces.NoName}
	err := Refused(errors.Join(cuff, errors.Join(unnamed, errors.New("no room"))))
	assert.EqualError(t, err, "cuff: the cut count is 0; it must be 1 or more\npiece without a name: give it a name\n"+
		"no room")
	assert.ErrorIs(t, err, unnamed)
	assert.EqualError(t, Refused(fmt.Errorf("in size 12: %w and %w", cuff, unnamed)), "in size 12: cuff: cut none and "+
		"no name")
}
