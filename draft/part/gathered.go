package part

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// gatheredSkirt is a front and a back panel, each drawn as a half.
func gatheredSkirt(m Measures, o Options, name string) (Block, error) {
	front, back := m.FrontWaist, m.BackWaist
	if front == 0 {
		if m.Waist == 0 && o.Length == 0 {
			return Block{}, construct.About(subject.WaistGirth).Refuse("%s: the waist girth is missing: measure it, or "+
				"give the length of the skirt's upper edge",
				"%s: der Taillenumfang fehlt: messen Sie, oder geben Sie die Länge der Oberkante des "+
					"Rocks an", called(name))
		}
		front, back = (m.Waist+waistbandEase)/4, (m.Waist+waistbandEase)/4
	}
	if o.Length > 0 {
		front, back = o.Length/4, o.Length/4
	}
	fullness := o.Fullness
	if fullness == 0 {
		fullness = usualFullness
	}
	frontPanel := skirtPanel(name+" front", seams.CentreFront, front*fullness, o.Depth)
	backPanel := skirtPanel(name+" back", seams.CentreBack, back*fullness, o.Depth)
	if m.Back != nil && m.Back.Fold == seams.None {
		backPanel.Fold, backPanel.Cut, backPanel.Pair = seams.None, 2, true
	}
	block := Block{Pieces: []pieces.Piece{frontPanel, backPanel}}
	if m.Front != nil {
		length := construct.SeamLength
		block.Pairings = []construct.Pairing{
			construct.Gathered("skirt to waist", frontPanel.Name, length(frontPanel, seams.Waist), "front waist",
				m.FrontWaist),
			construct.Gathered("skirt to waist", backPanel.Name, length(backPanel, seams.Waist), "back waist",
				m.BackWaist),
			construct.Equal("skirt side", frontPanel.Name, length(frontPanel, seams.SideSeam), backPanel.Name,
				length(backPanel, seams.SideSeam)),
		}
	}
	return block, nil
}

func skirtPanel(name string, centre seams.Name, width, length float64) pieces.Piece {
	corners := []orb.Point{{0, 0}, {width, 0}, {width, length}, {0, length}}
	piece := polygon(name, corners, seams.SkirtHem, seams.SideSeam, seams.Waist, centre)
	piece.Edges[0].Hem = true
	piece.Fold = centre
	return piece
}
