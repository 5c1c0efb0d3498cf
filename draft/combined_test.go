package draft

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/part"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// A facing in one for neck and armhole matches both, whatever dart lies between
// them and wherever the bodice opens; it is as wide everywhere as holds it in
// place (common practice: 5 cm or more, here six tenths of its depth), and its
// lower edge is square to centre and side, so that it runs on over the side.
func TestCombinedFacing(t *testing.T) {
	t.Parallel()
	for _, o := range []bodice.Options{
		{}, {Shaping: bodice.ShoulderDart}, {Shaping: bodice.ArmholeDart}, {Shaping: bodice.NoDart, Fit: bodice.Shirt},
		{FrontOpening: true, BackOnFold: true}, {BackOpening: true, Shaping: bodice.ShoulderDart},
		{Princess: bodice.FromShoulder, BelowWaist: 600},
		{NeckWiden: 25, FrontNeckDrop: 60, BackNeckDrop: 50, Shaping: bodice.ArmholeDart, Fit: bodice.Easy},
	} {
		for _, table := range Tables() {
			for _, name := range sample.Spread(Sizes(table)) {
				t.Run(fmt.Sprintf("%s %s %+v", table, name, o), func(t *testing.T) {
					asked := o
					if table == "children" {
						asked.NeckWiden /= 2
					}
					result, err := Draft(Request{Garment: "shift", Body: size(t, table, name), Bodice: &asked,
						Parts: []part.Options{{Kind: part.CombinedFacing}}})
					require.NoError(t, err)
					checkParts(t, result)
					front, back := pieceNamed(t, result, "neck and armhole facing front"), pieceNamed(t, result,
						"neck and armhole facing back")
					assert.InDelta(t, seam(front, seams.SideSeam), seam(back, seams.SideSeam), 1e-6)
					assert.InDelta(t, 180, corner(t, front, seams.FacingEdge)+corner(t, back, seams.FacingEdge), 0.01)
					depth := seam(front, seams.SideSeam)
					for _, p := range result.Pieces {
						if p.Name != front.Name && p.Name != back.Name {
							continue
						}
						lower, _ := p.Edge(seams.FacingEdge)
						for _, point := range lower.Path.Flatten(1) {
							for _, e := range p.Edges {
								if e.Name == seams.Neck || e.Name == seams.Armhole {
									assert.GreaterOrEqual(t, fromPath(point, e.Path), 0.6*depth, "%s: beside the %s",
										p.Name, e.Name)
								}
							}
						}
					}
					assert.True(t, depth > 35 && depth < 70.001, "depth %g", depth)
				})
			}
		}
	}
	for want, change := range map[string]func(*Request){
		"there are sleeves in the armholes": func(*Request) {},
		"neck and armhole facing: a depth of 30 cm is more than there is room for below neck and " +
			"underarm; ask for": func(r *Request) { r.Sleeve, r.Parts[0].Depth = nil, 300 },
		"there is no neck and armhole to face: draft a bodice": func(r *Request) { r.Sleeve, r.Bodice = nil, nil },
	} {
		request := blouse(size(t, "women", "12"))
		request.Parts = []part.Options{{Kind: part.CombinedFacing}}
		change(&request)
		_, err := Draft(request)
		assert.ErrorContains(t, err, want)
	}
}
