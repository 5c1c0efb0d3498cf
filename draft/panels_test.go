package draft

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/sleeve"
	"ellwand/pieces/seams"
)

// A princess seam keeps every other seam of the bodice, its panels match, and
// the side panel is the longer one by no more than can be eased over the bust
// (0 to 8 mm, common practice).
func TestPrincess(t *testing.T) {
	t.Parallel()
	for _, o := range []bodice.Options{
		{Princess: bodice.FromShoulder}, {Princess: bodice.FromArmhole},
		{Princess: bodice.FromShoulder, BelowWaist: 600, FrontOpening: true},
		{Princess: bodice.FromArmhole, BelowWaist: 240, Fit: bodice.Easy, NeckWiden: 15},
		{Princess: bodice.FromShoulder, BelowWaist: 600, BackOpening: true},
	} {
		checkVariant(t, func(r *Request) { r.Bodice = &o }, func(t *testing.T, r Result) {
			middle, side := pieceNamed(t, r, "front bodice"), pieceNamed(t, r, "side front bodice")
			ease := seam(side, seams.PrincessSeam) - seam(middle, seams.PrincessSeam)
			assert.True(t, ease >= -2 && ease <= 8, "ease %g", ease)
			backMiddle, backSide := pieceNamed(t, r, "back bodice"), pieceNamed(t, r, "side back bodice")
			assert.InDelta(t, seam(backMiddle, seams.PrincessSeam), seam(backSide, seams.PrincessSeam), 0.01)
			assert.Empty(t, middle.Darts)
			assert.Empty(t, side.Darts)

			plain, err := Draft(func() Request { q := blouse(r.Body); c := o; c.Princess = 0; q.Bodice = &c; return q }())
			require.NoError(t, err)
			for _, which := range []string{"front bodice", "back bodice"} {
				for _, name := range []seams.Name{seams.SideSeam, seams.Armhole, seams.Shoulder, seams.Neck} {
					whole := seam(pieceNamed(t, plain, which), name)
					assert.InDelta(t, whole, seam(pieceNamed(t, r, which), name)+
						seam(pieceNamed(t, r, "side "+which), name), 0.01, "%s %s", which, name)
				}
			}
		})
	}
}

// The tables of men and children in what is made for them.
func TestMensShirtAndChildrensBodice(t *testing.T) {
	t.Parallel()
	for _, name := range Sizes("men") {
		request := blouse(size(t, "men", name))
		request.Bodice = &bodice.Options{Shaping: bodice.NoDart, Fit: bodice.Shirt, Yoke: 90, BackOnFold: true,
			FrontOpening: true, BelowWaist: 280}
		request.Sleeve = &sleeve.Options{Style: sleeve.Shirt}
		result, err := Draft(request)
		require.NoError(t, err)
		checkSound(t, result)
		// A shirt's armhole is half the chest and up to 9 cm more, deeper in the
		// small sizes, whose scye depth grows slower (common practice).
		armhole := seam(result.Pieces[0], seams.Armhole) + seam(pieceNamed(t, result, "back bodice"), seams.Armhole) +
			seam(pieceNamed(t, result, "yoke"), seams.Armhole)
		assert.InDelta(t, result.Body[BustGirth]/2+45, armhole, 50, "armhole at chest %s", name)
	}
	for _, name := range Sizes("children") {
		for _, fit := range []bodice.Fit{bodice.Close, bodice.Easy, bodice.Shirt} {
			request := blouse(size(t, "children", name))
			request.Bodice = &bodice.Options{Shaping: bodice.NoDart, Fit: fit, StraightWaist: true}
			result, err := Draft(request)
			require.NoError(t, err, name)
			checkSound(t, result)
			front, back := pieceNamed(t, result, "front bodice"), pieceNamed(t, result, "back bodice")
			assert.InDelta(t, seam(back, seams.SideSeam), seam(front, seams.SideSeam), 0.01)
			assert.Empty(t, front.Darts)
		}
	}
}

// A yoke and the back below it make the back, and carry its notches.
func TestYokeAndNoDart(t *testing.T) {
	t.Parallel()
	o := bodice.Options{Shaping: bodice.NoDart, Fit: bodice.Shirt, Yoke: 90, BackOnFold: true, FrontOpening: true,
		BelowWaist: 260}
	checkVariant(t, func(r *Request) { r.Bodice, r.Sleeve = &o, &sleeve.Options{Style: sleeve.Shirt} },
		func(t *testing.T, r Result) {
			back, yoke := pieceNamed(t, r, "back bodice"), pieceNamed(t, r, "yoke")
			assert.Equal(t, "2 false centre back", fmt.Sprint(yoke.Cut, yoke.Pair, " ", yoke.Fold))
			assert.InDelta(t, 90, seam(yoke, seams.CentreBack), 1e-6)
			assert.InDelta(t, r.Body[BackNeckPointToWaist]+260,
				seam(yoke, seams.CentreBack)+seam(back, seams.CentreBack), 1e-6)
			assert.Empty(t, pieceNamed(t, r, "front bodice").Darts)
			assert.Len(t, pieceNamed(t, r, "sleeve").Marks, 3, "bicep line, elbow line and slit")
		})
	both := blouse(size(t, "women", "12"))
	both.Bodice = &bodice.Options{Princess: bodice.FromShoulder, Yoke: 80}
	_, err := Draft(both)
	assert.ErrorContains(t, err, "a back with a princess seam has no yoke")
	for _, depth := range []float64{-10, 20, 200} {
		request := blouse(size(t, "women", "12"))
		request.Bodice = &bodice.Options{Yoke: depth}
		_, err := Draft(request)
		assert.ErrorContains(t, err, "does not lie between shoulder and underarm; ask for")
	}
}

// The heads of a two-piece sleeve together are the head of the one-piece
// sleeve, and its seams match.
func TestTwoPieceAndCapSleeves(t *testing.T) {
	t.Parallel()
	for _, fit := range []bodice.Fit{bodice.Close, bodice.Easy, bodice.Shirt} {
		checkVariant(t, func(r *Request) {
			r.Bodice, r.Sleeve, r.Parts = &bodice.Options{Fit: fit}, &sleeve.Options{Style: sleeve.TwoPiece}, nil
		}, func(t *testing.T, r Result) {
			top, under := pieceNamed(t, r, "top sleeve"), pieceNamed(t, r, "under sleeve")
			armhole := seam(pieceNamed(t, r, "front bodice"), seams.Armhole) +
				seam(pieceNamed(t, r, "back bodice"), seams.Armhole)
			ease := (seam(top, seams.SleeveHead) + seam(under, seams.SleeveHead) - armhole) / armhole
			assert.True(t, ease >= 0.048 && ease <= 0.083, "ease %g", ease)
			assert.InDelta(t, seam(top, seams.FrontSeam), seam(under, seams.FrontSeam), 0.01)
			assert.InDelta(t, seam(top, seams.BackSeam), seam(under, seams.BackSeam), 0.01)
			assert.Greater(t, seam(top, seams.BackSeam), seam(top, seams.FrontSeam), "the elbow bends forward")
		})
		checkVariant(t, func(r *Request) {
			r.Bodice, r.Sleeve, r.Parts = &bodice.Options{Fit: fit}, &sleeve.Options{Style: sleeve.Cap}, nil
		}, nil)
	}
	for want, o := range map[string]sleeve.Options{
		"a two-piece sleeve is not gathered":                {Style: sleeve.TwoPiece, HeadFullness: 1.5},
		"does not go past the elbow on a shoulder to wrist": {Style: sleeve.TwoPiece, Reach: sleeve.Short},
		"a wrist width of 10 cm does not suit two pieces":   {Style: sleeve.TwoPiece, WristWidth: 100},
		"a cap sleeve of 50 cm does not join the notches":   {Style: sleeve.Cap, Length: 500},
	} {
		request := blouse(size(t, "women", "12"))
		request.Sleeve = &o
		_, err := Draft(request)
		assert.ErrorContains(t, err, want)
	}
}
