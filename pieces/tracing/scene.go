package tracing

import (
	"errors"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/raster"
	"ellwand/pieces/tracing/region"
)

// scene is a photo parted into its ground and the paper on it.
type scene struct {
	photo   *raster.Photo
	grey    *raster.Grey
	classes region.Classes
}

// open decodes a photo.
func open(data []byte) (*scene, error) {
	photo, err := raster.Decode(data)
	var large *raster.TooLarge
	switch {
	case errors.As(err, &large):
		return nil, &Fault{Trouble: TooLarge, At: nowhere, Width: large.Width, Height: large.Height}
	case errors.Is(err, raster.ErrTooSmall):
		return nil, plain(TooSmall)
	case err != nil:
		return nil, plain(Unreadable)
	}
	return &scene{photo: photo}, nil
}

// leastClear is how clearly colour must part paper from ground to be taken in place of
// brightness, which shadow changes; noise alone makes 0.64 of it [source.OwnChoice].
const leastClear = 0.85

// part the photo in the mix of its colours in which paper and ground differ most, as
// far as they lie within a part of the photo; nil for all of it. What hides lines of the
// ground is nil where there are none. Brightness is sharper
// than a colour, so that it is taken unless a colour differs clearly more.
func (s *scene) part(within func(orb.Point) bool, hide func(*raster.Grey) *raster.Grey) error {
	const wide, clearly = 400, 1.5 // pixels [source.OwnChoice]
	best, most, clearest := raster.Mixes[0], 0.0, 0.0
	for i, mix := range raster.Mixes {
		contrast, clear := region.Contrast(s.photo.Sparse(mix, wide, s.unshrunk(within)))
		if i == 0 {
			contrast *= clearly
		}
		if contrast > most {
			best, most, clearest = mix, contrast, clear
		}
	}
	if s.grey == nil || best != raster.Mixes[0] {
		s.grey = s.photo.Channel(best)
	}
	bare := s.grey
	if _, clear := region.Contrast(s.photo.Sparse(raster.Blueness, wide, s.unshrunk(within))); clear > max(leastClear,
		clearest) {
		bare = s.photo.Channel(raster.Blueness)
	}
	if hide != nil {
		bare = hide(bare)
	}
	var err error
	if s.classes, err = region.Part(bare, within); err != nil {
		return plain(Flat)
	}
	return nil
}

// unshrunk says of pixels of the photo what was said of those of the picture that is
// worked on.
func (s *scene) unshrunk(within func(orb.Point) bool) func(orb.Point) bool {
	if within == nil {
		return nil
	}
	return func(p orb.Point) bool { return within(s.shrunk(p)) }
}

// shrunk is a pixel of the photo on the picture that is worked on.
func (s *scene) shrunk(p orb.Point) orb.Point {
	step := float64(s.photo.Step())
	return orb.Point{(p[0]+0.5)/step - 0.5, (p[1]+0.5)/step - 0.5}
}

// bright says whether most of some places are of the bright class.
func (s *scene) bright(places []orb.Point) bool {
	n := 0
	for _, p := range places {
		if s.classes.At(p) {
			n++
		}
	}
	return 2*n > len(places)
}

// brightRim says whether most of the rim of the photo is of the bright class: pieces lie
// on a ground that goes all round.
func (s *scene) brightRim() bool {
	w, h := s.classes.Width, s.classes.Height
	n, all := 0, 0
	for i, bright := range s.classes.Bright {
		if x, y := i%w, i/w; x == 0 || y == 0 || x == w-1 || y == h-1 {
			all++
			if bright {
				n++
			}
		}
	}
	return 2*n > all
}

// surrounds says whether a shape is what lies about the ground: it takes more of the rim
// of the photo than a piece that goes over it.
func (s *scene) surrounds(b region.Blob) bool {
	const share = 0.2 // [source.OwnChoice]
	return float64(b.Rim) > share*2*float64(s.classes.Width+s.classes.Height)
}

func (s *scene) fault(trouble Trouble, b region.Blob) *Fault {
	middle := b.Box.Min.Add(b.Box.Max).Div(2)
	return &Fault{Trouble: trouble, At: orb.Point{
		float64(middle.X) / float64(s.classes.Width), float64(middle.Y) / float64(s.classes.Height),
	}}
}
