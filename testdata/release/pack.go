package main

import (
	"archive/tar"
	"archive/zip"
	"bytes"
	"compress/gzip"
	"fmt"
	"io/fs"
	"os"
	"time"
)

// member of an archive.
type member struct {
	name string
	mode fs.FileMode
	data []byte
	link string // where a symbolic link leads
}

// members of an archive: the program, ready to be started by a double click, its licence
// and where to begin.
func (t target) members(version string, program []byte) ([]member, error) {
	licence, err := os.ReadFile("LICENSE")
	if err != nil {
		return nil, err
	}
	typeface, err := os.ReadFile("pieces/drawing/typeface/LICENSE")
	if err != nil {
		return nil, err
	}
	out := []member{
		{name: "BEGIN.txt", mode: 0o644, data: []byte(begin)}, {name: "LICENSE.txt", mode: 0o644, data: licence},
		{name: "LICENSE-typeface.txt", mode: 0o644, data: typeface},
	}
	switch t.system {
	case "darwin":
		const inside = "Ellwand.app/Contents/"
		return append(out,
			member{name: inside + "Info.plist", mode: 0o644, data: fmt.Appendf(nil, plist, version, version)},
			member{name: inside + "MacOS/ellwand", mode: 0o755, data: program},
			member{name: "ellwand", mode: fs.ModeSymlink | 0o777, link: inside + "MacOS/ellwand"}), nil
	case "windows":
		return append(out, member{name: "ellwand.exe", mode: 0o755, data: program}), nil
	}
	return append(out, member{name: "ellwand", mode: 0o755, data: program}), nil
}

// begin is what stands in each archive.
const begin = `Ellwand

Double-click ellwand (on a Mac: Ellwand). It opens a page in your browser, on
which everything is done; nothing leaves your computer. The first time your
system may ask whether you trust a program from the internet: on a Mac, click it
with the right button and choose Open; on Windows, choose More info and Run anyway.

In a terminal, ellwand --help lists the commands that do the same.
`

// plist tells a Mac what the program is.
const plist = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE plist PUBLIC "-//Apple//DTD PLIST 1.0//EN" "http://www.apple.com/DTDs/PropertyList-1.0.dtd">
<plist version="1.0"><dict>
<key>CFBundleExecutable</key><string>ellwand</string>
<key>CFBundleIdentifier</key><string>ellwand</string>
<key>CFBundleName</key><string>Ellwand</string>
<key>CFBundlePackageType</key><string>APPL</string>
<key>CFBundleShortVersionString</key><string>%s</string>
<key>CFBundleVersion</key><string>%s</string>
<key>LSUIElement</key><true/>
</dict></plist>
`

// past is when every member was changed, so that archives are the same from run to run.
var past = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// pack the members into a folder of that name.
func (t target) pack(name, version string, program []byte) ([]byte, error) {
	all, err := t.members(version, program)
	if err != nil {
		return nil, err
	}
	for i := range all {
		all[i].name = name + "/" + all[i].name
	}
	if t.system == "windows" {
		return zipped(all)
	}
	return tarred(all)
}

func zipped(all []member) ([]byte, error) {
	var out bytes.Buffer
	w := zip.NewWriter(&out)
	for _, m := range all {
		header := &zip.FileHeader{Name: m.name, Method: zip.Deflate, Modified: past}
		header.SetMode(m.mode)
		to, err := w.CreateHeader(header)
		if err != nil {
			return nil, err
		}
		if _, err := to.Write(m.data); err != nil {
			return nil, err
		}
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	return out.Bytes(), nil
}

func tarred(all []member) ([]byte, error) {
	var out bytes.Buffer
	packed, err := gzip.NewWriterLevel(&out, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	w := tar.NewWriter(packed)
	for _, m := range all {
		header := &tar.Header{Name: m.name, Mode: int64(m.mode.Perm()), Size: int64(len(m.data)), ModTime: past,
			Linkname: m.link, Typeflag: tar.TypeReg}
		if m.link != "" {
			header.Typeflag = tar.TypeSymlink
		}
		if err := w.WriteHeader(header); err != nil {
			return nil, err
		}
		if _, err := w.Write(m.data); err != nil {
			return nil, err
		}
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	if err := packed.Close(); err != nil {
		return nil, err
	}
	return out.Bytes(), nil
}
