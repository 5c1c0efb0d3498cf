// Package limit bounds what comes in, before any work is done on it: every bound
// of the program on files, lists, names and numbers is in its table. They are our
// own choice: far above any job of a workroom, and low enough that the largest
// job that they allow is laid in less than 1 GB of memory.
package limit

import "fmt"

// Limit is a bound on one thing that comes in.
type Limit int

// The limits.
const (
	JobSize Limit = iota
	InstanceSize
	PiecesFile
	LayoutSize
	Layouts
	Points
	Marks
	Depth
	Text
	Paragraph
	Wearers
	Garments
	Made
	Pieces
	Parts
	Cloths
	Widths
	Offers
	Remnants
	Flaws
	Corners
	Sizes
	List
	Outputs
	Arguments
	Argument
	PiecesOfLay
	CornersOfLay
	Faults
	Workers
	Passes
	Items
	Demand
	Vertices
	Orientations
	VerticesOfAll
	Port
	Drawings
	DrawingSize
	DrawnThings
	DrawnPoints
	DrawnNesting
	DrawnOutlines
	DrawnWords
	// ClothWidth is in mm.
	ClothWidth
)

// table of the limits: the most, and what is said of more.
var table = [...]struct {
	most     int
	sentence string
}{
	JobSize:      {1 << 20, "is too large for a job file, which has at most %d bytes (1 MB); is it the right file?"},
	InstanceSize: {64 << 20, "is too large for an instance, which has at most %d bytes (64 MB); is it the right file?"},
	PiecesFile: {4 << 20, "is too large for a file of pieces, which has at most %d bytes (4 MB); is it the right " +
		"file?"},
	LayoutSize:    {16 << 20, "is too large for a layout, which has at most %d bytes (16 MB); is it the right file?"},
	Layouts:       {50, "has more than %d entries; bring in those of the cloths that are laid"},
	Points:        {5000, "has more than %d points; give it with fewer"},
	Marks:         {500, "has more than %d entries; leave some out"},
	Depth:         {100, "is nested more than %d deep; a job file never is: check its brackets and indentation"},
	Text:          {200, "is longer than %d characters; shorten it"},
	Paragraph:     {2000, "is longer than %d characters; shorten it, or make two entries of it"},
	Wearers:       {500, "has more than %d entries; make a job for each %[1]d wearers"},
	Garments:      {200, "has more than %d entries; make a job for each %[1]d garments"},
	Made:          {10_000, "makes more than %d garments in all, counted by wearer and quantity; make several jobs of it"},
	Pieces:        {500, "has more than %d entries; make two garments of it"},
	Parts:         {100, "has more than %d entries; make two garments of it"},
	Cloths:        {50, "has more than %d entries; make several jobs of it"},
	Widths:        {50, "has more than %d entries; leave some out"},
	Offers:        {100, "has more than %d entries; leave some out"},
	Remnants:      {100, "has more than %d entries; ask about some of them at a time"},
	Flaws:         {200, "has more than %d entries; join those that lie side by side"},
	Corners:       {500, "has more than %d corners; give the outline with fewer"},
	Sizes:         {50, "has more than %d entries; leave some out"},
	List:          {1000, "has more than %d entries; leave some out"},
	Outputs:       {20, "has more than %d entries; leave some out"},
	Arguments:     {1000, "has more than %d words; give one job file, and each option once"},
	Argument:      {4096, "is longer than %d bytes; shorten it"},
	PiecesOfLay:   {10_000, "has more than %d pieces to be cut from it; make several jobs of it"},
	CornersOfLay:  {2_000_000, "has outlines of more than %d points in all to be cut from it; make several jobs of it"},
	Faults:        {100, "there are more than %d faults; those that follow are not listed"},
	Workers:       {256, "must be at most %d"},
	Passes:        {1_000_000_000, "must be at most %d"},
	Items:         {2000, "are more than %d; lay some of them at a time"},
	Demand:        {10_000, "must be at most %d"},
	Vertices:      {10_000, "has more than %d points; give it with fewer"},
	Orientations:  {360, "are more than %d; leave some out"},
	VerticesOfAll: {2_000_000, "have more than %d points in all, copies counted; lay some of them at a time"},
	Port:          {65_535, "must be at most %d"},
	Drawings:      {50, "has more than %d entries; bring in some of them at a time"},
	DrawingSize: {32 << 20, "is too large for a drawing of a pattern, which has at most %d bytes (32 MB); is it the " +
		"right file?"},
	DrawnThings:   {100_000, "has more than %d lines and other things in it; leave out what is no pattern piece"},
	DrawnPoints:   {400_000, "has more than %d points in all; write it with fewer, or in several files"},
	DrawnNesting:  {16, "has blocks or groups within each other more than %d deep; write it without them"},
	DrawnOutlines: {500, "has more than %d closed outlines; leave out what is no pattern piece"},
	DrawnWords:    {20_000, "has more than %d texts; leave out what is no pattern piece"},
	ClothWidth:    {100_000, "is wider than %d mm, and no cloth is; look at its unit"},
}

// Most is the largest number that is allowed.
func (l Limit) Most() int { return table[l].most }

// Sentence says what is wrong with more, and what to do: it goes on from the name
// of the place.
func (l Limit) Sentence() string { return fmt.Sprintf(table[l].sentence, table[l].most) }

// Check refuses more than is allowed, naming the place.
func (l Limit) Check(place string, n int) error {
	if n <= l.Most() {
		return nil
	}
	return fmt.Errorf("%s %s", place, l.Sentence())
}
