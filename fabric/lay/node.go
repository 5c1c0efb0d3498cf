package lay

import "ellwand/pieces/marks"

// NodeKind says what a node of a repeat is.
type NodeKind uint8

// The kinds of nodes.
const (
	NoNode       NodeKind = iota
	ClothNode             // the cloth itself, at place 0
	TemplateNode          // a template, by its index
	PairNode              // the right and left of a piece, by its index
	PointNode             // a match point as drawn, by its name
	ImageNode             // its image on what lies face down
	CentreNode            // the centre line of the repeat
	MotifNode             // the centre of a motif
)

// Node is something that has a place on the repeat. The zero Node is none.
type Node struct {
	Kind  NodeKind
	Index int
	Name  marks.Name
}

// Places are where the match points lie on the open cloth, by axis and node
// (across, with a node for each side): what is laid later keeps to them.
type Places [2]map[Node]float64
