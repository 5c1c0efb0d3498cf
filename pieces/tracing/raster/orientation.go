package raster

import (
	"bytes"
	"encoding/binary"
)

// Orientation is how a picture is to be turned to stand upright: 1, as it is, to 8, as
// the tag 0x0112 of Exif numbers them (JEITA CP-3451, from memory).
type Orientation int

const upright Orientation = 1 // [source.Geometry]

// How files begin.
var (
	beginsJPEG = []byte("\xff\xd8\xff")
	beginsPNG  = []byte("\x89PNG\r\n\x1a\n")
)

// sidesSwap says that rows become columns.
func (o Orientation) sidesSwap() bool { return o >= 5 }

// source is the pixel of the stored picture, so wide and high, that is shown at a place
// of the upright one.
func (o Orientation) source(x, y, width, height int) (int, int) {
	switch o {
	case 2:
		return width - 1 - x, y
	case 3:
		return width - 1 - x, height - 1 - y
	case 4:
		return x, height - 1 - y
	case 5:
		return y, x
	case 6:
		return y, height - 1 - x
	case 7:
		return width - 1 - y, height - 1 - x
	case 8:
		return width - 1 - y, x
	}
	return x, y
}

// orientationOf reads the tag from a JPEG (its segment APP1) or a PNG (its chunk eXIf).
// A file without one, or with one that is broken, is taken as upright.
func orientationOf(data []byte) Orientation {
	if bytes.HasPrefix(data, beginsPNG) {
		return ofTIFF(exifChunk(data[len(beginsPNG):]))
	}
	for at := 2; at+4 <= len(data) && data[at] == 0xff; {
		kind, size := data[at+1], int(binary.BigEndian.Uint16(data[at+2:]))
		end := at + 2 + size
		if kind == 0xda || size < 2 || end > len(data) { // the pixels begin, or it is broken
			break
		}
		if body, is := bytes.CutPrefix(data[at+4:end], []byte("Exif\x00\x00")); is && kind == 0xe1 {
			return ofTIFF(body)
		}
		at = end
	}
	return upright
}

// exifChunk of a PNG, or nil.
func exifChunk(data []byte) []byte {
	for len(data) >= 12 {
		size := int(binary.BigEndian.Uint32(data))
		if size > len(data)-12 {
			return nil
		}
		if bytes.HasPrefix(data[4:], []byte("eXIf")) {
			return data[8 : 8+size]
		}
		data = data[12+size:]
	}
	return nil
}

// ofTIFF finds the tag in the first directory of the tags.
func ofTIFF(data []byte) Orientation {
	if len(data) < 8 {
		return upright
	}
	order := binary.ByteOrder(binary.BigEndian)
	if data[0] == 'I' {
		order = binary.LittleEndian
	}
	at := uint64(order.Uint32(data[4:]))
	if at+2 > uint64(len(data)) {
		return upright
	}
	entries := data[at+2:]
	for range order.Uint16(data[at:]) {
		if len(entries) < 12 {
			break
		}
		if order.Uint16(entries) == 0x0112 {
			if o := Orientation(order.Uint16(entries[8:])); o >= 1 && o <= 8 {
				return o
			}
			break
		}
		entries = entries[12:]
	}
	return upright
}
