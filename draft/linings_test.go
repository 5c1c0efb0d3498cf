package draft

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/lining"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/trousers"
	"ellwand/pieces/marks"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// A lining ends so much above the hem and is so much wider at the centre back.
func TestLinings(t *testing.T) {
	result, err := Draft(shirt(size(t, "women", "12")))
	require.NoError(t, err)
	back, lined := pieceNamed(t, result, "back bodice"), pieceNamed(t, result, "back bodice lining")
	assert.InDelta(t, seam(back, seams.SideSeam)-20, seam(lined, seams.SideSeam), 0.01)
	assert.InDelta(t, seam(back, seams.Neck)+20, seam(lined, seams.Neck), 0.01)
	assert.InDelta(t, seam(back, seams.CentreBack)-20, seam(lined, seams.CentreBack), 0.01)
	assert.Equal(t, "centre back lining", lined.Fold.String()+" "+lined.Cloth)
	hem, _ := lined.Edge(seams.NarrowHem)
	assert.Equal(t, 15., hem.Allowance)
	front := pieceNamed(t, result, "front bodice lining")
	_, grown := front.Edge(seams.ExtensionNeck)
	assert.False(t, grown, "it ends at the facing")
	for _, p := range result.Pieces {
		if p.Cloth != "interfacing" {
			continue
		}
		shell := pieceNamed(t, result, p.Name[:len(p.Name)-len(" interfacing")])
		for i, edge := range p.Edges {
			want := 0.
			if shell.Name == "buttoned cuff" {
				want = shell.Edges[i].Allowance - 5
			}
			assert.InDelta(t, want, edge.Allowance, 1e-9, "%s %s", p.Name, edge.Name)
		}
	}
	assert.Equal(t, "2 true", fmt.Sprint(pieceNamed(t, result, "buttoned cuff interfacing").Cut, " ",
		pieceNamed(t, result, "buttoned cuff interfacing").Pair))
}

// The lining of a vented back has no vent: its centre back is straight, notched
// where the vent begins, so that the seam is left open below, and may carry a
// pleat of ease (common practice).
func TestLiningOfAVent(t *testing.T) {
	for _, pleat := range []float64{0, 20} {
		request := dress(size(t, "women", "12"))
		request.Skirt = &skirt.Options{Vent: true, Length: 700}
		request.Linings[0].BackPleat = pleat
		result, err := Draft(request)
		require.NoError(t, err)
		checkParts(t, result)
		back, lined := pieceNamed(t, result, "back skirt"), pieceNamed(t, result, "back skirt lining")
		_, vented := lined.Edge(seams.VentEdge)
		assert.False(t, vented)
		assert.InDelta(t, 700-20, seam(lined, seams.CentreBack), 0.01)
		assert.InDelta(t, seam(back, seams.Waist)+pleat, seam(lined, seams.Waist), 0.01)
		assert.InDelta(t, seam(back, seams.SkirtHem)-40+pleat, seam(lined, seams.NarrowHem), 1)
		for _, n := range lined.Notches {
			if n.Match == marks.OpenBelow {
				assert.InDelta(t, seam(back, seams.CentreBack), n.At, 0.01, "where the vent begins")
			}
		}
		for _, s := range result.Sheets {
			if s.Piece == lined.Name {
				assert.Contains(t, s.Steps[1].Text(measure.Centimetre), "leave out the vent")
			}
		}
		assert.Contains(t, fmt.Sprint(lined.Notches), "open below")
	}
}

// The lining of trousers has neither fly nor casing: it ends at the centre front
// and at the waist, and is as long there as the shell.
func TestLiningOfTrousers(t *testing.T) {
	for _, opening := range []trousers.Opening{trousers.Fly, trousers.SideZip, trousers.ElasticWaist} {
		request := trousersOf(size(t, "women", "12"), trousers.Options{Opening: opening, Pocket: trousers.SidePocket},
			part.Waistband)
		request.Linings = []Lining{{Of: []string{"front trousers", "back trousers"}, Cloth: "lining",
			Options: lining.Options{Shorter: 20}}}
		result, err := Draft(request)
		require.NoError(t, err)
		checkParts(t, result)
		plain, err := Draft(trousersOf(request.Body,
			trousers.Options{Opening: trousers.SideZip, Pocket: trousers.SidePocket}, part.Waistband))
		require.NoError(t, err)
		for _, which := range []string{"front trousers", "back trousers"} {
			lined := pieceNamed(t, result, which+" lining")
			waist := seam(lined, seams.Waist)
			if opening != trousers.ElasticWaist {
				assert.InDelta(t, seam(pieceNamed(t, plain, which), seams.Waist), waist, 0.01, which)
				assert.InDelta(t, seam(pieceNamed(t, plain, which), seams.Crotch), seam(lined, seams.Crotch), 0.01,
					which)
			} else {
				assert.InDelta(t, pieceNamed(t, result,
					which).Marks[len(pieceNamed(t, result, which).Marks)-1].Path.Length(), waist, 0.01)
				assert.InDelta(t, seam(pieceNamed(t, result, which), seams.OutsideLeg)-30-20,
					seam(lined, seams.OutsideLeg), 0.01)
			}
			for _, e := range lined.Edges {
				assert.NotContains(t, e.Name.String(), "fly")
				assert.NotContains(t, e.Name.String(), "casing")
			}
		}
	}
}
