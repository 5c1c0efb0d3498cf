package job

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

const handLaidJob = `job: Bag
units: cm
garments: [{name: bag, pieces: [{name: side, width: 30, height: 50, cut: 2}, {name: back, width: 60, height: 60}]}]
cloths:
  - name: shell
    width: 140
    laid_by_hand:
      - width: 140
        lay: one selvedge folded in
        folded_in: 36.05
        pieces:
          - {piece: back, garment: bag, at: [5, 100], turn: 270, on_open: yes}
          - {piece: side, garment: bag, at: [1.5, 32], on_fold: no}
      - width: 140
        lay: part folded, part open
        pieces: [{piece: back, garment: bag, at: [90, 70.25], on_open: yes, face_down: yes}]
`

// What a hand has laid in lays of two parts is read with its part and with how far the
// selvedge is folded in.
func TestHandLaidInTwoPartsIsRead(t *testing.T) {
	work, err := resolve(t, handLaidJob)
	require.NoError(t, err)
	assert.Equal(t, []cloth.HandLaid{
		{Width: 1400, Lay: int(lay.SelvedgeIn), FoldedIn: 360.5, Pieces: []cloth.HandPiece{
			{Name: "back", Garment: "bag", Copy: 1, At: orb.Point{50, 1000}, Turn: 270, OnOpen: true},
			{Name: "side", Garment: "bag", Copy: 1, At: orb.Point{15, 320}},
		}},
		{Width: 1400, Lay: int(lay.InStretches), Pieces: []cloth.HandPiece{
			{Name: "back", Garment: "bag", Copy: 1, At: orb.Point{900, 702.5}, OnOpen: true, FaceDown: true},
		}},
	}, work.Cloths[0].Cloth.ByHand)
}
